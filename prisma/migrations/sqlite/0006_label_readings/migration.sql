-- CreateTable
CREATE TABLE "LabelReading" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "photoId" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "corrected" TEXT,
    "words" JSONB NOT NULL,
    "crop" JSONB NOT NULL,
    "degrees" REAL NOT NULL,
    "state" TEXT NOT NULL,
    "answeredBy" TEXT,
    "answeredAt" DATETIME,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "LabelReading_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateIndex
CREATE UNIQUE INDEX "LabelReading_photoId_key" ON "LabelReading"("photoId");
