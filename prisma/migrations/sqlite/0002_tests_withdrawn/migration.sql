-- AlterTable
ALTER TABLE "BenchTest" ADD COLUMN "withdrawnAt" DATETIME;
ALTER TABLE "BenchTest" ADD COLUMN "withdrawnById" TEXT;
ALTER TABLE "BenchTest" ADD COLUMN "withdrawnWhy" TEXT;
