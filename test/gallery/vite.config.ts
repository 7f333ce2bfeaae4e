import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';
import { fromRoot } from '../../house/root.mjs';

/** The gallery (gallery.tsx): with hot reload for the eye, built for its journey. */
export default defineConfig({
  root: fromRoot('test/gallery'),
  plugins: [preact()],
  cacheDir: fromRoot('node_modules/.cache/gallery'),
  build: {
    outDir: fromRoot('node_modules/.cache/gallery-built'),
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
  },
  preview: { host: '127.0.0.1' },
  server: { host: '127.0.0.1', fs: { allow: [fromRoot()] } },
});
