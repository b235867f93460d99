import type { RecordKind } from '../declaration.ts';

export const place = {
  kind: 'Place',
  type: 'record',
  doc: 'A town or region. Its labels are its names.',
  standard: 'CIDOC CRM E53',
  words: { en: ['place', 'places'] },
  plural: 'places',
  shared: true,
  fields: {
    latitude: { type: 'number', unit: 'degrees north, WGS 84', least: -90, most: 90, doc: 'Latitude of its centre.' },
    longitude: {
      type: 'number',
      unit: 'degrees east, WGS 84',
      least: -180,
      most: 180,
      doc: 'Longitude of its centre.',
    },
    within: { type: 'record', to: ['Place'], doc: 'The larger place that it lies in.' },
    country: { type: 'text', doc: 'MARC country code, without padding.' },
    harbour: { type: 'flag', doc: 'Whether sea-going ships called there.' },
  },
} as const satisfies RecordKind;
