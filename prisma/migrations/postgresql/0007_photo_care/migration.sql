-- AlterTable
ALTER TABLE "Photo" ADD COLUMN "sentKey" TEXT;

-- CreateIndex
CREATE UNIQUE INDEX "Photo_sentKey_key" ON "Photo"("sentKey");
