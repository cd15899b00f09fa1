import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { askPython } from './python';

// Read by Pillow (Debian python3-pil), since the icons are written by an encoder of our own.
const readIcon = `
import sys
from PIL import Image
picture = Image.open(sys.argv[1]); picture.load()
print(f'{picture.format} {picture.width}x{picture.height} {picture.convert("RGBA").getpixel((picture.width // 2, picture.height // 10 * 9))[3]}')
`;

const { icons } = JSON.parse(readFileSync('public/manifest.webmanifest', 'utf8')) as {
  icons: { src: string; sizes: string }[];
};

test.each([...icons, { src: 'apple-touch-icon.png', sizes: '180x180' }])(
  'another reader opens $src at the size the manifest promises',
  ({ src, sizes }) => {
    expect(askPython(readIcon, `public/${src}`)).toBe(`PNG ${sizes} 255`);
  },
);
