import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/** Everything the app needs is in the precache: the two faces of type too, so that a field with no signal reads well. */
const PRECACHED = [
  '**/*.{js,css,html,svg,png,webmanifest}',
  '**/*-latin-wght-normal*.woff2',
  '**/*-latin-ext-wght-normal*.woff2',
];

export default defineConfig({
  plugins: [
    react(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      includeAssets: ['icon.svg', 'icon-192.png', 'icon-512.png'],
      workbox: {
        globPatterns: PRECACHED,
        navigateFallback: '/index.html',
        navigateFallbackDenylist: [/^\/api\//],
        cleanupOutdatedCaches: true,
      },
      manifest: {
        id: '/',
        name: 'Sedgeline',
        short_name: 'Sedgeline',
        description: 'Plan, record and understand the training of a retriever.',
        lang: 'en',
        dir: 'ltr',
        start_url: '/',
        scope: '/',
        display: 'standalone',
        orientation: 'any',
        background_color: '#faf8ef',
        theme_color: '#faf8ef',
        categories: ['sports', 'utilities'],
        icons: [
          { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
          { src: '/icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
          { src: '/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
          { src: '/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
    }),
  ],
  worker: { format: 'es' },
  build: { manifest: true, target: 'es2023', sourcemap: false, modulePreload: { polyfill: false } },
});
