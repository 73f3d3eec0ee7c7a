-- CreateTable
CREATE TABLE "LabelReading" (
    "id" TEXT NOT NULL,
    "photoId" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "corrected" TEXT,
    "words" JSONB NOT NULL,
    "crop" JSONB NOT NULL,
    "degrees" DOUBLE PRECISION NOT NULL,
    "state" TEXT NOT NULL,
    "answeredBy" TEXT,
    "answeredAt" TIMESTAMP(3),
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "LabelReading_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "LabelReading_photoId_key" ON "LabelReading"("photoId");

-- AddForeignKey
ALTER TABLE "LabelReading" ADD CONSTRAINT "LabelReading_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo"("id") ON DELETE CASCADE ON UPDATE CASCADE;
