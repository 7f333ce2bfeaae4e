import { CLASS_TABLES, type ClassTable, makeClassTable } from '../../../core/facts/class-tables.ts';
import { saveText } from '../../device/save-text.ts';
import { today } from '../../state/day.ts';
import { knowledge, modelDay, observations } from '../../state/knowledge.ts';
import { classState } from '../../state/open-class.ts';
import { settings } from '../../state/settings.ts';
import { thresholds } from '../../state/thresholds.ts';

/** Everything that was noted, as files that any spreadsheet opens, each column explained. */
export function Tables() {
  const save = (table: ClassTable) => {
    const spec = {
      state: classState.peek(),
      observations: observations.peek(),
      read: knowledge.peek().read,
      thresholds: thresholds.peek(),
      rowRule: settings.peek().skippedRow,
      day: modelDay(),
    };
    // The sign in front tells spreadsheets that it is UTF-8.
    const text = `\uFEFF${makeClassTable(table, spec)}`;
    saveText(`sweepline-${table}-${today()}.csv`, text, 'text/csv;charset=utf-8');
  };
  return (
    <ul class="tables">
      {(Object.keys(CLASS_TABLES) as ClassTable[]).map((table) => (
        <li key={table} class="part">
          <div>
            <h2>{names[table].name}</h2>
            <p>{names[table].says}</p>
            <details>
              <summary>Its columns</summary>
              <dl>
                {Object.entries(CLASS_TABLES[table]).map(([column, says]) => (
                  <div key={column}>
                    <dt>{column}</dt>
                    <dd>{says}</dd>
                  </div>
                ))}
              </dl>
            </details>
          </div>
          <button
            type="button"
            class="button"
            aria-label={`Save ${names[table].name}`}
            onClick={() => save(table)}
          >
            Save as CSV
          </button>
        </li>
      ))}
    </ul>
  );
}

const names: Readonly<Record<ClassTable, { readonly name: string; readonly says: string }>> = {
  children: { name: 'Children', says: 'Who is in the class, and in which small group.' },
  readings: {
    name: 'Readings',
    says: 'Everything a child read alone, one reading a row, from warm-ups and checks.',
  },
  together: { name: 'Read together', says: 'What a group read or wrote together.' },
  known: {
    name: 'What they know',
    says: 'What each child knows of each card today, and how sure.',
  },
  spelling: {
    name: 'Spelling papers',
    says: 'What each child wrote, word by word, and what of it was heard and spelled.',
  },
  checks: { name: 'Short checks', says: 'Each check with its score.' },
};
