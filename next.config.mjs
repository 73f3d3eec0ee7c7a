/** @type {import("next").NextConfig} */
export default {
  poweredByHeader: false,
  productionBrowserSourceMaps: false,
  images: { unoptimized: true },
  serverExternalPackages: [
    "better-sqlite3", "@prisma/adapter-better-sqlite3", "@prisma/adapter-pg", "@prisma/client", "pg",
    "@node-rs/argon2", "sharp", "heic-decode", "libheif-js", "nodemailer",
  ],
};
