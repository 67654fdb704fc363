import type { FastifyHelmetOptions } from '@fastify/helmet';

/**
 * Helmet's default headers, its content policy made to fit an app that people host themselves. Only what differs from
 * the default is named, each with its reason; scripts stay `'self'`: no inline script, no `eval`.
 */
export const securityHeaders: FastifyHelmetOptions = {
  contentSecurityPolicy: {
    directives: {
      // Everything is served from here: nothing of another host is fetched, fonts and styles included.
      'connect-src': ["'self'"],
      'font-src': ["'self'", 'data:'],
      'style-src': ["'self'", "'unsafe-inline'"],
      // The service worker and the workers of sound and film.
      'worker-src': ["'self'"],
      'manifest-src': ["'self'"],
      // A film or a picture opened from the device is shown through an object URL; it never leaves the device.
      'img-src': ["'self'", 'data:', 'blob:'],
      'media-src': ["'self'", 'blob:'],
      // Served over plain HTTP on a home network: upgrading would ask for a port where nobody listens.
      'upgrade-insecure-requests': null,
    },
  },
  // Whoever puts TLS before the server decides this there; saying it here could lock a host out of plain HTTP.
  strictTransportSecurity: false,
};
