-- AlterTable
ALTER TABLE "Intake" ADD COLUMN     "addedAt" TIMESTAMP(3),
ADD COLUMN     "addsToId" TEXT;

-- CreateIndex
CREATE INDEX "Intake_addsToId_idx" ON "Intake"("addsToId");
