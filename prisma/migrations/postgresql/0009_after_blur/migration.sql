-- AlterTable
ALTER TABLE "Measurement" ADD COLUMN     "withdrawnWhy" TEXT;

-- AlterTable
ALTER TABLE "Document" ADD COLUMN     "alteredAt" TIMESTAMP(3),
ADD COLUMN     "alteredWhy" TEXT;
