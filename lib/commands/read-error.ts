/** Why a file could not be read, by the system's code, in words. */
const IN_WORDS: Readonly<Record<string, string>> = { ENOENT: "there is no such file", EISDIR: "it is a folder", EACCES: "it may not be read" };

export const readError = (error: unknown): string => IN_WORDS[(error as NodeJS.ErrnoException).code ?? ""] ?? (error as Error).message;
