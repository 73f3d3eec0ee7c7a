-- CreateEnum
CREATE TYPE "PostKind" AS ENUM ('letter', 'reply', 'automatic', 'bounce', 'unreadable');

-- CreateEnum
CREATE TYPE "PostState" AS ENUM ('received', 'waiting', 'filed', 'aside');

-- CreateTable
CREATE TABLE "Post" (
    "id" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "bytes" INTEGER NOT NULL,
    "state" "PostState" NOT NULL,
    "kind" "PostKind",
    "says" TEXT,
    "attempts" INTEGER NOT NULL DEFAULT 0,
    "begunAt" TIMESTAMP(3),
    "messageId" TEXT,
    "fromName" TEXT,
    "fromAddress" TEXT,
    "subject" TEXT,
    "sentAt" TIMESTAMP(3),
    "text" TEXT,
    "quoted" TEXT,
    "pictures" INTEGER NOT NULL DEFAULT 0,
    "leftOut" TEXT,
    "enquiryId" TEXT,
    "broughtById" TEXT,
    "arrivedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Post_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Mailbox" (
    "id" TEXT NOT NULL,
    "uidValidity" TEXT,
    "lastUid" TEXT NOT NULL DEFAULT '0',
    "leaseOwner" TEXT,
    "leaseUntil" TIMESTAMP(3),
    "lookedAt" TIMESTAMP(3),
    "trouble" TEXT,
    "troubleSince" TIMESTAMP(3),

    CONSTRAINT "Mailbox_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "Post_sha256_key" ON "Post"("sha256");

-- CreateIndex
CREATE INDEX "Post_state_arrivedAt_idx" ON "Post"("state", "arrivedAt");

-- CreateIndex
CREATE INDEX "Post_enquiryId_arrivedAt_idx" ON "Post"("enquiryId", "arrivedAt");

-- AddForeignKey
ALTER TABLE "Post" ADD CONSTRAINT "Post_enquiryId_fkey" FOREIGN KEY ("enquiryId") REFERENCES "Enquiry"("id") ON DELETE CASCADE ON UPDATE CASCADE;
