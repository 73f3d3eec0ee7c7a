-- CreateTable
CREATE TABLE "Measurement" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "photoId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "marks" JSONB NOT NULL,
    "result" JSONB NOT NULL,
    "from" TEXT NOT NULL,
    "at" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "withdrawnAt" DATETIME,
    "withdrawnById" TEXT,
    "replacedById" TEXT,
    CONSTRAINT "Measurement_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateIndex
CREATE INDEX "Measurement_photoId_idx" ON "Measurement"("photoId");
