import { describe, expect, it } from 'vitest';
import { stylesheetFaults } from './stylesheets.ts';

const controls = ['controls/card.css', '@layer controls { .card { color: red } }'] as const;

describe('stylesheetFaults', () => {
  it('finds nothing in sheets that lie in their layers and style each class once', () => {
    const sheets = [
      ['look/layers.css', '/* The order. */ @layer base, controls, screens;'],
      ['look/base.css', '@layer base { @font-face { font-family: A } a { color: blue } }'],
      ['look/print.css', '@layer paper { @media print { .not-printed { display: none } } }'],
      controls,
      [
        'screens/today/today.css',
        '@layer screens { .parts > li:has(.card) { margin: 0 } .today .card ~ p { margin: 0 } }',
      ],
      ['screens/today/day.css', '@layer screens { .parts { gap: 0 } }'],
    ] as const;
    const markup = [
      ['screens/today/today.tsx', '<ol class="parts"><li class="card quiet">'],
      ['screens/desk/desk.tsx', '<li class="card">'],
    ] as const;
    expect(stylesheetFaults(sheets, markup)).toEqual([]);
  });

  it.each([
    ['no layer', '.parts { gap: 0 }'],
    ['part of it', '@layer screens { a { gap: 0 } } .parts { gap: 0 }'],
    ['a layer of another floor', '@layer controls { .parts { gap: 0 } }'],
  ])('finds a sheet with rules outside its layer: %s', (_, css) => {
    expect(stylesheetFaults([['screens/today/today.css', css]], [])).toEqual([
      'in-its-layer: screens/today/today.css has rules outside its layer (screens)',
    ]);
  });

  it.each([
    '.today .card { margin: 0 }',
    '.card:hover { margin: 0 }',
    '.today > :is(.card, .swap)::after { margin: 0 }',
    '@media print { .today li.card:not(.swap) { margin: 0 } }',
  ])('finds a class that a screen styles though a control does: %s', (rule) => {
    const sheet = ['screens/today/today.css', `@layer screens { ${rule} }`] as const;
    expect(stylesheetFaults([controls, sheet], [])).toEqual([
      'styled-once: .card is styled in controls and screens/today',
    ]);
  });

  it('finds a class that two screens name, be it only around what they style', () => {
    const sheets = [
      ['screens/desk/desk.css', '@layer screens { .lit > b { margin: 0 } }'],
      ['screens/stage/row.css', '@layer screens { .lit > i { margin: 0 } }'],
    ] as const;
    expect(stylesheetFaults(sheets, [])).toEqual([
      'screens-apart: .lit is named in screens/desk and screens/stage',
    ]);
  });

  it('finds a screen that leans on the sheet of another', () => {
    const sheets = [['screens/known/known.css', '@layer screens { .sign { margin: 0 } }']] as const;
    const markup = [['screens/pages/page.tsx', '<svg class="small sign">']] as const;
    expect(stylesheetFaults(sheets, markup)).toEqual([
      'screens-apart: screens/pages/page.tsx has .sign, which is styled in screens/known',
    ]);
  });
});
