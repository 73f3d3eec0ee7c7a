-- CreateTable
CREATE TABLE "Workshop" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "values" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Staff" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL DEFAULT false,
    "image" TEXT,
    "role" TEXT NOT NULL DEFAULT 'trainee',
    "disabledAt" DATETIME,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "StaffSession" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "expiresAt" DATETIME NOT NULL,
    "token" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "userId" TEXT NOT NULL,
    CONSTRAINT "StaffSession_userId_fkey" FOREIGN KEY ("userId") REFERENCES "Staff" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "StaffAccount" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" DATETIME,
    "refreshTokenExpiresAt" DATETIME,
    "scope" TEXT,
    "password" TEXT,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "StaffAccount_userId_fkey" FOREIGN KEY ("userId") REFERENCES "Staff" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "StaffVerification" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "RateLimit" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "key" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "lastRequest" BIGINT NOT NULL
);

-- CreateTable
CREATE TABLE "Invitation" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "tokenHash" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "email" TEXT,
    "expiresAt" DATETIME NOT NULL,
    "usedAt" DATETIME,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP
);

-- CreateTable
CREATE TABLE "Intake" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "tokenHash" TEXT NOT NULL,
    "answers" JSONB NOT NULL,
    "addressHash" TEXT,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    "expiresAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Client" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "email" TEXT,
    "telephone" TEXT,
    "language" TEXT NOT NULL DEFAULT 'en',
    "isTrade" BOOLEAN NOT NULL DEFAULT false,
    "suppressedAt" DATETIME,
    "suppressedWhy" TEXT,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP
);

-- CreateTable
CREATE TABLE "ThirdParty" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "enquiryId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "reference" TEXT,
    CONSTRAINT "ThirdParty_enquiryId_fkey" FOREIGN KEY ("enquiryId") REFERENCES "Enquiry" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Enquiry" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "reference" TEXT NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'new',
    "stateSince" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "channel" TEXT NOT NULL,
    "clientId" TEXT NOT NULL,
    "intakeId" TEXT,
    "answers" JSONB NOT NULL,
    "title" TEXT NOT NULL,
    "urgency" TEXT NOT NULL,
    "urgencyWhy" TEXT NOT NULL,
    "submittedAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "joinedToId" TEXT,
    CONSTRAINT "Enquiry_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Enquiry_intakeId_fkey" FOREIGN KEY ("intakeId") REFERENCES "Intake" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
    CONSTRAINT "Enquiry_joinedToId_fkey" FOREIGN KEY ("joinedToId") REFERENCES "Enquiry" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ClientLink" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "enquiryId" TEXT NOT NULL,
    "tokenHash" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expiresAt" DATETIME NOT NULL,
    "revokedAt" DATETIME,
    CONSTRAINT "ClientLink_enquiryId_fkey" FOREIGN KEY ("enquiryId") REFERENCES "Enquiry" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Rug" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "enquiryId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "title" TEXT NOT NULL,
    CONSTRAINT "Rug_enquiryId_fkey" FOREIGN KEY ("enquiryId") REFERENCES "Enquiry" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Answer" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "rugId" TEXT NOT NULL,
    "question" TEXT NOT NULL,
    "value" JSONB NOT NULL,
    "from" TEXT NOT NULL,
    "at" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "Answer_rugId_fkey" FOREIGN KEY ("rugId") REFERENCES "Rug" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Photo" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "intakeId" TEXT,
    "rugId" TEXT,
    "position" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "receivedBytes" INTEGER NOT NULL,
    "receivedType" TEXT NOT NULL,
    "originalName" TEXT,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "takenAt" DATETIME,
    "exposure" JSONB,
    "measured" JSONB NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "Photo_intakeId_fkey" FOREIGN KEY ("intakeId") REFERENCES "Intake" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
    CONSTRAINT "Photo_rugId_fkey" FOREIGN KEY ("rugId") REFERENCES "Rug" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Finding" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "rugId" TEXT NOT NULL,
    "what" TEXT NOT NULL,
    "value" JSONB NOT NULL,
    "strength" TEXT NOT NULL,
    "from" TEXT NOT NULL,
    "at" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "Finding_rugId_fkey" FOREIGN KEY ("rugId") REFERENCES "Rug" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Assessment" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "rugId" TEXT NOT NULL,
    "modelVersion" TEXT NOT NULL,
    "asOf" DATETIME NOT NULL,
    "settings" JSONB NOT NULL,
    "findings" JSONB NOT NULL,
    "result" JSONB NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "Assessment_rugId_fkey" FOREIGN KEY ("rugId") REFERENCES "Rug" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Draft" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "enquiryId" TEXT NOT NULL,
    "number" INTEGER NOT NULL DEFAULT 1,
    "approvedNumber" INTEGER,
    "waitingNumber" INTEGER,
    "waitingKind" TEXT,
    "waitingById" TEXT,
    "waitingSince" DATETIME,
    CONSTRAINT "Draft_enquiryId_fkey" FOREIGN KEY ("enquiryId") REFERENCES "Enquiry" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Draft_waitingById_fkey" FOREIGN KEY ("waitingById") REFERENCES "Staff" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Revision" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "draftId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "subject" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "paragraphs" JSONB,
    "authorId" TEXT,
    "assessmentId" TEXT,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "Revision_draftId_fkey" FOREIGN KEY ("draftId") REFERENCES "Draft" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Revision_authorId_fkey" FOREIGN KEY ("authorId") REFERENCES "Staff" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
    CONSTRAINT "Revision_assessmentId_fkey" FOREIGN KEY ("assessmentId") REFERENCES "Assessment" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Letter" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "enquiryId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "automatic" BOOLEAN NOT NULL,
    "state" TEXT NOT NULL,
    "messageId" TEXT NOT NULL,
    "inReplyTo" TEXT,
    "references" TEXT,
    "toName" TEXT NOT NULL,
    "toAddress" TEXT NOT NULL,
    "subject" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "html" TEXT NOT NULL,
    "notBefore" DATETIME NOT NULL,
    "attempts" INTEGER NOT NULL DEFAULT 0,
    "leaseOwner" TEXT,
    "leaseUntil" DATETIME,
    "lastResponse" TEXT,
    "sentAt" DATETIME,
    "approvedById" TEXT,
    "secondedById" TEXT,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "Letter_enquiryId_fkey" FOREIGN KEY ("enquiryId") REFERENCES "Enquiry" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Letter_approvedById_fkey" FOREIGN KEY ("approvedById") REFERENCES "Staff" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
    CONSTRAINT "Letter_secondedById_fkey" FOREIGN KEY ("secondedById") REFERENCES "Staff" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "BenchTest" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "rugId" TEXT NOT NULL,
    "test" TEXT NOT NULL,
    "yarn" TEXT NOT NULL,
    "response" JSONB NOT NULL,
    "staffId" TEXT,
    "at" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "BenchTest_rugId_fkey" FOREIGN KEY ("rugId") REFERENCES "Rug" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Outcome" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "rugId" TEXT NOT NULL,
    "value" JSONB NOT NULL,
    "staffId" TEXT,
    "at" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "Outcome_rugId_fkey" FOREIGN KEY ("rugId") REFERENCES "Rug" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Audit" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "at" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "actorKind" TEXT NOT NULL,
    "actorId" TEXT,
    "action" TEXT NOT NULL,
    "enquiryId" TEXT,
    "detail" JSONB NOT NULL,
    CONSTRAINT "Audit_enquiryId_fkey" FOREIGN KEY ("enquiryId") REFERENCES "Enquiry" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateIndex
CREATE UNIQUE INDEX "Staff_email_key" ON "Staff"("email");

-- CreateIndex
CREATE UNIQUE INDEX "StaffSession_token_key" ON "StaffSession"("token");

-- CreateIndex
CREATE INDEX "StaffSession_userId_idx" ON "StaffSession"("userId");

-- CreateIndex
CREATE INDEX "StaffAccount_userId_idx" ON "StaffAccount"("userId");

-- CreateIndex
CREATE INDEX "StaffVerification_identifier_idx" ON "StaffVerification"("identifier");

-- CreateIndex
CREATE UNIQUE INDEX "RateLimit_key_key" ON "RateLimit"("key");

-- CreateIndex
CREATE UNIQUE INDEX "Invitation_tokenHash_key" ON "Invitation"("tokenHash");

-- CreateIndex
CREATE UNIQUE INDEX "Intake_tokenHash_key" ON "Intake"("tokenHash");

-- CreateIndex
CREATE INDEX "Intake_expiresAt_idx" ON "Intake"("expiresAt");

-- CreateIndex
CREATE INDEX "Intake_addressHash_createdAt_idx" ON "Intake"("addressHash", "createdAt");

-- CreateIndex
CREATE INDEX "Client_email_idx" ON "Client"("email");

-- CreateIndex
CREATE INDEX "ThirdParty_enquiryId_idx" ON "ThirdParty"("enquiryId");

-- CreateIndex
CREATE UNIQUE INDEX "Enquiry_reference_key" ON "Enquiry"("reference");

-- CreateIndex
CREATE UNIQUE INDEX "Enquiry_intakeId_key" ON "Enquiry"("intakeId");

-- CreateIndex
CREATE INDEX "Enquiry_state_urgency_submittedAt_idx" ON "Enquiry"("state", "urgency", "submittedAt");

-- CreateIndex
CREATE INDEX "Enquiry_clientId_idx" ON "Enquiry"("clientId");

-- CreateIndex
CREATE INDEX "Enquiry_joinedToId_idx" ON "Enquiry"("joinedToId");

-- CreateIndex
CREATE UNIQUE INDEX "ClientLink_tokenHash_key" ON "ClientLink"("tokenHash");

-- CreateIndex
CREATE INDEX "ClientLink_enquiryId_idx" ON "ClientLink"("enquiryId");

-- CreateIndex
CREATE UNIQUE INDEX "Rug_enquiryId_position_key" ON "Rug"("enquiryId", "position");

-- CreateIndex
CREATE INDEX "Answer_rugId_question_at_idx" ON "Answer"("rugId", "question", "at");

-- CreateIndex
CREATE INDEX "Photo_intakeId_position_idx" ON "Photo"("intakeId", "position");

-- CreateIndex
CREATE INDEX "Photo_rugId_position_idx" ON "Photo"("rugId", "position");

-- CreateIndex
CREATE INDEX "Finding_rugId_idx" ON "Finding"("rugId");

-- CreateIndex
CREATE INDEX "Assessment_rugId_createdAt_idx" ON "Assessment"("rugId", "createdAt");

-- CreateIndex
CREATE UNIQUE INDEX "Draft_enquiryId_key" ON "Draft"("enquiryId");

-- CreateIndex
CREATE UNIQUE INDEX "Revision_draftId_number_key" ON "Revision"("draftId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "Letter_messageId_key" ON "Letter"("messageId");

-- CreateIndex
CREATE INDEX "Letter_state_notBefore_idx" ON "Letter"("state", "notBefore");

-- CreateIndex
CREATE INDEX "Letter_enquiryId_createdAt_idx" ON "Letter"("enquiryId", "createdAt");

-- CreateIndex
CREATE INDEX "BenchTest_rugId_idx" ON "BenchTest"("rugId");

-- CreateIndex
CREATE INDEX "Outcome_rugId_idx" ON "Outcome"("rugId");

-- CreateIndex
CREATE INDEX "Audit_enquiryId_at_idx" ON "Audit"("enquiryId", "at");
