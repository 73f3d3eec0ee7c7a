-- CreateTable
CREATE TABLE "ParagraphVersion" (
    "id" TEXT NOT NULL,
    "paragraphId" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "wording" JSONB,
    "reason" TEXT,
    "staffId" TEXT,
    "at" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "ParagraphVersion_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "ParagraphVersion_paragraphId_version_key" ON "ParagraphVersion"("paragraphId", "version");
