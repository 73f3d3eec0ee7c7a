-- CreateTable
CREATE TABLE "Post" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "sha256" TEXT NOT NULL,
    "bytes" INTEGER NOT NULL,
    "state" TEXT NOT NULL,
    "kind" TEXT,
    "says" TEXT,
    "attempts" INTEGER NOT NULL DEFAULT 0,
    "begunAt" DATETIME,
    "messageId" TEXT,
    "fromName" TEXT,
    "fromAddress" TEXT,
    "subject" TEXT,
    "sentAt" DATETIME,
    "text" TEXT,
    "quoted" TEXT,
    "pictures" INTEGER NOT NULL DEFAULT 0,
    "leftOut" TEXT,
    "enquiryId" TEXT,
    "broughtById" TEXT,
    "arrivedAt" DATETIME NOT NULL,
    CONSTRAINT "Post_enquiryId_fkey" FOREIGN KEY ("enquiryId") REFERENCES "Enquiry" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Mailbox" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "uidValidity" TEXT,
    "lastUid" TEXT NOT NULL DEFAULT '0',
    "leaseOwner" TEXT,
    "leaseUntil" DATETIME,
    "lookedAt" DATETIME,
    "trouble" TEXT,
    "troubleSince" DATETIME
);

-- CreateIndex
CREATE UNIQUE INDEX "Post_sha256_key" ON "Post"("sha256");

-- CreateIndex
CREATE INDEX "Post_state_arrivedAt_idx" ON "Post"("state", "arrivedAt");

-- CreateIndex
CREATE INDEX "Post_enquiryId_arrivedAt_idx" ON "Post"("enquiryId", "arrivedAt");
