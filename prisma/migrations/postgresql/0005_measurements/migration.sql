-- CreateTable
CREATE TABLE "Measurement" (
    "id" TEXT NOT NULL,
    "photoId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "marks" JSONB NOT NULL,
    "result" JSONB NOT NULL,
    "from" TEXT NOT NULL,
    "at" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "withdrawnAt" TIMESTAMP(3),
    "withdrawnById" TEXT,
    "replacedById" TEXT,

    CONSTRAINT "Measurement_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Measurement_photoId_idx" ON "Measurement"("photoId");

-- AddForeignKey
ALTER TABLE "Measurement" ADD CONSTRAINT "Measurement_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo"("id") ON DELETE CASCADE ON UPDATE CASCADE;
