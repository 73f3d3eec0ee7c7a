-- AlterTable
ALTER TABLE "LabelReading" ADD COLUMN "agreed" JSONB;
