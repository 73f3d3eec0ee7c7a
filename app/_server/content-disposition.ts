/** The header that names a file (RFC 6266): `plain` for programs that know no other letters, the name itself in the form of RFC 8187, in which nothing can end it. */
export const contentDisposition = (how: "attachment" | "inline", fileName: string, plain: string): string =>
  `${how}; filename="${plain}"; filename*=UTF-8''${encodeURIComponent(fileName).replace(/['()*]/g, (c) => `%${c.charCodeAt(0).toString(16).toUpperCase()}`)}`;
