import { LIGHT } from '../build/colors.ts';

/** Addresses are relative to this file, so the site can stand in any folder. */
const manifest = {
  name: 'Halfdry',
  short_name: 'Halfdry',
  description: 'Your top coat looks wrong. Do you touch it, and what do you do?',
  lang: 'en-US',
  id: './',
  start_url: './',
  scope: './',
  display: 'standalone',
  background_color: LIGHT.paper,
  theme_color: LIGHT.paper,
  icons: [
    { src: 'icons/192.png', sizes: '192x192', type: 'image/png' },
    { src: 'icons/512.png', sizes: '512x512', type: 'image/png' },
    { src: 'icons/512-maskable.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
};

export const GET = () => new Response(JSON.stringify(manifest));
