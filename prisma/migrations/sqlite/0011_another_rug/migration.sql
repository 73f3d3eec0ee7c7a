-- AlterTable
ALTER TABLE "Intake" ADD COLUMN "addedAt" DATETIME;
ALTER TABLE "Intake" ADD COLUMN "addsToId" TEXT;

-- CreateIndex
CREATE INDEX "Intake_addsToId_idx" ON "Intake"("addsToId");
