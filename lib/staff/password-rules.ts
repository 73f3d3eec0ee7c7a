/**
 * Which passwords are refused. No rule of composition: any characters, spaces too (OWASP ASVS 5.0, 6.2.5), and 15 at
 * least because there is no second factor (6.2.9). What is refused is what people try first (6.2.4, 6.2.12).
 */
export const PASSWORD_LIMITS = { minChars: 15, maxChars: 128, minLeft: 6 } as const;

/** Words that lists of the commonest passwords are built from. From memory, not copied from a list. */
const COMMON_WORDS = [
  "password",
  "passwort",
  "passphrase",
  "passcode",
  "letmein",
  "welcome",
  "admin",
  "administrator",
  "default",
  "changeme",
  "secret",
  "iloveyou",
  "love",
  "monkey",
  "dragon",
  "master",
  "login",
  "football",
  "baseball",
  "princess",
  "sunshine",
  "shadow",
  "superman",
  "batman",
  "trustno",
  "hello",
  "freedom",
  "whatever",
  "starwars",
  "summer",
  "winter",
  "spring",
  "autumn",
  "correcthorsebatterystaple",
  "plainpile",
  "workshop",
  "carpet",
  "owner",
  "rugs",
  "rug",
  "test",
  "user",
  "guest",
  "the",
  "for",
  "and",
  "my",
] as const;
/** Runs along the keyboard and the alphabet; four neighbours in a row, either way, count as one run. */
const RUNS = [
  "abcdefghijklmnopqrstuvwxyz",
  "01234567890",
  "qwertyuiop",
  "qwertzuiop",
  "azertyuiop",
  "asdfghjkl",
  "zxcvbnm",
  "1qaz2wsx3edc4rfv5tgb",
] as const;
const RUN_CHARS = 4;

/**
 * What is wrong with a password, in a sentence; null when nothing is. `names`: what belongs to this person and place
 * (their name and address, the workshop's name), which nobody may build a password from alone.
 */
export function passwordTrouble(password: string, names: readonly string[] = []): string | null {
  if ([...password].length < PASSWORD_LIMITS.minChars)
    return `A password needs at least ${PASSWORD_LIMITS.minChars} characters. Three or four words that do not belong together are good.`;
  if (password.length > PASSWORD_LIMITS.maxChars) return `A password can have at most ${PASSWORD_LIMITS.maxChars} characters.`;
  const left = withoutTheObvious(password.toLowerCase().normalize("NFKC"), names);
  return new Set(left).size >= PASSWORD_LIMITS.minLeft
    ? null
    : "That password is among the first that are guessed. Take words that do not belong together.";
}

/** What remains after names, common words, runs and repeats are taken out. */
function withoutTheObvious(text: string, names: readonly string[]): string {
  const words = [...names.flatMap((n) => n.toLowerCase().split(/[^\p{L}\p{N}]+/u)).filter((w) => w.length > 2), ...COMMON_WORDS].sort(
    (a, b) => b.length - a.length,
  );
  let left = undisguised(text);
  for (const word of words) left = left.replaceAll(word, " ");
  for (const run of RUNS.flatMap((r) => [r, [...r].reverse().join("")])) left = withoutRun(left, run);
  return left.replace(/(.{1,8}?)\1+/gu, "$1").replace(/[\s\p{P}\p{S}]|\d{1,4}$/gu, "");
}

/** Reads the usual stand-ins as letters, but only between letters, so that plain numbers stay runs. */
const STAND_INS: Readonly<Record<string, string>> = { "0": "o", "1": "i", "3": "e", "4": "a", "5": "s", "7": "t", "@": "a", $: "s", "!": "i" };
const undisguised = (text: string): string => text.replace(/(?<=\p{L})[013457@$!](?=\p{L})/gu, (c) => STAND_INS[c] ?? c);

function withoutRun(text: string, run: string): string {
  let left = text;
  for (let length = run.length; length >= RUN_CHARS; length--) {
    for (let at = 0; at + length <= run.length; at++) left = left.replaceAll(run.slice(at, at + length), " ");
  }
  return left;
}
