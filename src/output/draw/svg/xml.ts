/** A text for XML 1.0: escaped, without the characters that XML cannot hold. https://www.w3.org/TR/xml/#charsets */
export function xml(text: string): string {
  return text
    .toWellFormed()
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufffe\uffff\ufffd]/g, '')
    .replace(/[&<>"']/g, character => entities[character]!);
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** A coordinate, to a tenth. */
export function n(value: number): string {
  const rounded = Math.round(value * 10) / 10;
  return String(rounded === 0 ? 0 : rounded);
}

export interface TextLook {
  readonly size: number;
  readonly italic?: boolean;
  readonly anchor?: 'middle' | 'end';
  readonly fill: string;
  /** Colour of the ground that parts the letters from lines behind them. */
  readonly halo?: string;
}

export function svgText(x: number, y: number, text: string, look: TextLook): string {
  const attributes = [
    `x="${n(x)}" y="${n(y)}" font-size="${look.size}" fill="${look.fill}"`,
    ...(look.italic === true ? ['font-style="italic"'] : []),
    ...(look.anchor === undefined ? [] : [`text-anchor="${look.anchor}"`]),
    ...(look.halo === undefined
      ? []
      : [`stroke="${look.halo}" stroke-width="3" stroke-linejoin="round" paint-order="stroke"`]),
  ];
  return `<text ${attributes.join(' ')}>${xml(text)}</text>`;
}
