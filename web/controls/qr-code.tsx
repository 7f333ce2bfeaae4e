import './qr-code.css';
import { encode } from 'uqr';

/** A text as a QR code (ISO/IEC 18004), in ink on white in every look. */
export function QrCode({ text, name }: { readonly text: string; readonly name: string }) {
  const { data, size } = encode(text, { border: 2, ecc: 'M' });
  const path = data
    .flatMap((row, y) => row.map((isDark, x) => (isDark ? `M${x} ${y}h1v1h-1z` : '')))
    .join('');
  return (
    <svg
      class="qr-code"
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={name}
      shape-rendering="crispEdges"
    >
      <rect width={size} height={size} fill="#ffffff" />
      <path d={path} fill="#1d2740" />
    </svg>
  );
}
