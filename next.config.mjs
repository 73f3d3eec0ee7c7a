/** @type {import("next").NextConfig} */
export default {
  poweredByHeader: false,
  productionBrowserSourceMaps: false,
  images: { unoptimized: true },
  // Types are checked by `npm test`; a start on a small machine need not wait for them, nor fail on a test's.
  typescript: { ignoreBuildErrors: true },
  serverExternalPackages: [
    "better-sqlite3", "@prisma/adapter-better-sqlite3", "@prisma/adapter-pg", "@prisma/client", "pg",
    "@node-rs/argon2", "sharp", "libheif-js", "nodemailer", "imapflow", "mailparser", "tesseract.js",
  ],
};
