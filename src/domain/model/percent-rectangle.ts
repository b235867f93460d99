import type { ItemsField } from './declaration.ts';

/** A rectangle on a picture, in percent of its width and height from the top left corner. */
export const percentRectangle = {
  name: 'PercentRectangle',
  item: {
    x: { type: 'number', unit: 'percent of the width', least: 0, most: 100, required: true, doc: 'Left edge.' },
    y: { type: 'number', unit: 'percent of the height', least: 0, most: 100, required: true, doc: 'Top edge.' },
    width: { type: 'number', unit: 'percent of the width', least: 0, most: 100, required: true, doc: 'Width.' },
    height: { type: 'number', unit: 'percent of the height', least: 0, most: 100, required: true, doc: 'Height.' },
  },
} as const satisfies Pick<ItemsField, 'name' | 'item'>;

/** A spot on a picture, in percent of its width and height from the top left corner. */
export const percentPoint = {
  name: 'PercentPoint',
  item: {
    x: { type: 'number', unit: 'percent of the width', least: 0, most: 100, required: true, doc: 'From the left.' },
    y: { type: 'number', unit: 'percent of the height', least: 0, most: 100, required: true, doc: 'From the top.' },
  },
} as const satisfies Pick<ItemsField, 'name' | 'item'>;
