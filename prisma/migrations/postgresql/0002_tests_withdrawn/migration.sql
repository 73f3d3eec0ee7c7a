-- AlterTable
ALTER TABLE "BenchTest" ADD COLUMN     "withdrawnAt" TIMESTAMP(3),
ADD COLUMN     "withdrawnById" TEXT,
ADD COLUMN     "withdrawnWhy" TEXT;
