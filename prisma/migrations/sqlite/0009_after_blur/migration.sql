-- AlterTable
ALTER TABLE "Measurement" ADD COLUMN "withdrawnWhy" TEXT;

-- AlterTable
ALTER TABLE "Document" ADD COLUMN "alteredAt" DATETIME;
ALTER TABLE "Document" ADD COLUMN "alteredWhy" TEXT;
