/** What a page says by itself in the browser. Handed over ready for its language; arguments are plain, `{name}`. */
export const BROWSER = {
  "form.again": "Please look at this once more",
  "form.error-title": "Error: {title}",
  "error.title": "Something went wrong with us",
  "error.head": "Something went wrong with us, not with you",
  "error.kept": "What you told us up to the page before is kept. Please try once more; if it happens again, wait a few minutes or ring us.",
  "error.again": "Try again",
} as const;
