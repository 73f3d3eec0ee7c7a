-- CreateTable
CREATE TABLE "ParagraphVersion" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "paragraphId" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "wording" JSONB,
    "reason" TEXT,
    "staffId" TEXT,
    "at" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP
);

-- CreateIndex
CREATE UNIQUE INDEX "ParagraphVersion_paragraphId_version_key" ON "ParagraphVersion"("paragraphId", "version");
