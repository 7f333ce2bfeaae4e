import chromium from '@sparticuz/chromium';

/**
 * Unpacks the Chromium that its npm package ships into the folder for temporary files, with the
 * libraries it needs where it believes to run on the machines it was made for. Run as a program of
 * its own, with both told by the environment (see chromium.mjs).
 */
await chromium.executablePath();
