import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import preact from '@preact/preset-vite';
import type { Plugin } from 'vite';
import { defineConfig } from 'vite';
import { VitePWA, type VitePWAOptions } from 'vite-plugin-pwa';
import { pagePolicy } from './house/headers.ts';
import { fromRoot } from './house/root.mjs';

/** The built page states its own policy; the development server's reloading would break under it. */
const policyInPage: Plugin = {
  name: 'policy-in-page',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: pagePolicy },
      injectTo: 'head-prepend',
    },
  ],
};

/**
 * Writes down what is put aside, and puts the list aside too, so that a page can see whether all of it is
 * there (web/device/refill.ts).
 */
const listed: ManifestTransform = (entries) => {
  const text = JSON.stringify([LIST, ...entries.map(({ url }) => url)]);
  writeFileSync(fromRoot('dist', LIST), text);
  const revision = createHash('sha256').update(text).digest('hex').slice(0, 32);
  return { manifest: [...entries, { url: LIST, revision, size: text.length }] };
};

const LIST = 'put-aside.json';

type ManifestTransform = NonNullable<VitePWAOptions['workbox']['manifestTransforms']>[number];

/**
 * Everything the app ever asks for is put aside at the first load (docs/decisions/0002). A new version
 * waits until no Sweepline window is open: it never changes a page under a running drill.
 */
const offline = VitePWA({
  strategies: 'generateSW',
  registerType: 'prompt',
  injectRegister: 'script-defer',
  workbox: {
    globPatterns: ['**/*.{html,js,css,woff,woff2,bin,json,svg,png,webp,icc,webmanifest}'],
    maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
    clientsClaim: true,
    skipWaiting: false,
    cleanupOutdatedCaches: true,
    navigateFallback: null,
    manifestTransforms: [listed],
    // Any other address below the app's leads to the app, not to its page there, which would look for its
    // files below that address; what stands after # goes along. This function is written into the worker.
    runtimeCaching: [
      {
        urlPattern: ({ request }) => request.mode === 'navigate',
        handler: async () => Response.redirect(new URL('./', location.href).href),
      },
    ],
  },
  manifest: {
    name: 'Sweepline',
    short_name: 'Sweepline',
    description: 'Plan and run a daily phonics warm-up.',
    lang: 'en-US',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#faf6ee',
    theme_color: '#faf6ee',
    icons: [
      { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
      { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
      { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any maskable' },
    ],
  },
});

/** What every visit begins with is one file: thirty small ones are larger, packed each by itself. */
const atOnce = { name: 'at-once', tags: ['$initial' as const] };

export default defineConfig({
  root: 'web',
  base: './',
  plugins: [preact(), policyInPage, offline],
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: { output: { codeSplitting: { groups: [atOnce] } } },
  },
  server: { host: '127.0.0.1', fs: { allow: ['..'] } },
});
