/**
 * What the app may do, told to the browser: code, styles, fonts and data from its own origin and
 * from nowhere else. `data:` pictures are those the styles carry within. The rules that a page cannot
 * state about itself (who may frame it) stand in `headers` only.
 * Reference: Content Security Policy Level 3, W3C.
 */
const rules = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
];

/** The policy as the built page carries it itself, so that it holds on any web server. */
export const pagePolicy = rules.join('; ');

/** The headers that every answer of the app's own server carries. */
export const headers: Readonly<Record<string, string>> = {
  'Content-Security-Policy': [...rules, "frame-ancestors 'none'"].join('; '),
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), geolocation=(), payment=(), usb=()',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
};
