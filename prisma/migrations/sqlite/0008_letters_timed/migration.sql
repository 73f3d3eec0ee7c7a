-- AlterTable
ALTER TABLE "Draft" ADD COLUMN "waitingSendAt" DATETIME;

-- CreateTable
CREATE TABLE "Inspection" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "rugId" TEXT NOT NULL,
    "by" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "found" TEXT NOT NULL,
    "isBeyondRepair" BOOLEAN NOT NULL,
    "recordedById" TEXT,
    "at" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "withdrawnAt" DATETIME,
    "withdrawnById" TEXT,
    "withdrawnWhy" TEXT,
    CONSTRAINT "Inspection_rugId_fkey" FOREIGN KEY ("rugId") REFERENCES "Rug" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Inspection_recordedById_fkey" FOREIGN KEY ("recordedById") REFERENCES "Staff" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Document" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "enquiryId" TEXT NOT NULL,
    "rugId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "title" TEXT NOT NULL,
    "filled" JSONB NOT NULL,
    "content" JSONB NOT NULL,
    "pdf" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "bytes" INTEGER NOT NULL,
    "madeById" TEXT,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "Document_enquiryId_fkey" FOREIGN KEY ("enquiryId") REFERENCES "Enquiry" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Document_rugId_fkey" FOREIGN KEY ("rugId") REFERENCES "Rug" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Document_madeById_fkey" FOREIGN KEY ("madeById") REFERENCES "Staff" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Enclosure" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "documentId" TEXT NOT NULL,
    "draftId" TEXT,
    "letterId" TEXT,
    "at" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "Enclosure_documentId_fkey" FOREIGN KEY ("documentId") REFERENCES "Document" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Enclosure_draftId_fkey" FOREIGN KEY ("draftId") REFERENCES "Draft" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Enclosure_letterId_fkey" FOREIGN KEY ("letterId") REFERENCES "Letter" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateIndex
CREATE INDEX "Inspection_rugId_at_idx" ON "Inspection"("rugId", "at");

-- CreateIndex
CREATE INDEX "Document_enquiryId_createdAt_idx" ON "Document"("enquiryId", "createdAt");

-- CreateIndex
CREATE UNIQUE INDEX "Document_rugId_kind_version_key" ON "Document"("rugId", "kind", "version");

-- CreateIndex
CREATE INDEX "Enclosure_draftId_idx" ON "Enclosure"("draftId");

-- CreateIndex
CREATE INDEX "Enclosure_letterId_idx" ON "Enclosure"("letterId");

-- CreateIndex
CREATE UNIQUE INDEX "Enclosure_documentId_draftId_key" ON "Enclosure"("documentId", "draftId");

-- CreateIndex
CREATE UNIQUE INDEX "Enclosure_documentId_letterId_key" ON "Enclosure"("documentId", "letterId");
