import { CLASS_TABLES, type ClassTable, makeClassTable } from '../../../core/facts/class-tables.ts';
import { saveText } from '../../device/save-text.ts';
import { today } from '../../state/day.ts';
import { knowledge, modelDay, observations } from '../../state/knowledge.ts';
import { classState } from '../../state/open-class.ts';
import { settings } from '../../state/settings.ts';
import { thresholds } from '../../state/thresholds.ts';
import { say } from './wording.ts';

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
              <summary>{say.tables.itsColumns}</summary>
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
            aria-label={say.tables.save(names[table].name)}
            onClick={() => save(table)}
          >
            {say.tables.saveAsCsv}
          </button>
        </li>
      ))}
    </ul>
  );
}

const names: Readonly<Record<ClassTable, { readonly name: string; readonly says: string }>> = {
  children: { name: say.tables.children, says: say.tables.whoIs },
  readings: {
    name: say.tables.readings,
    says: say.tables.everythingAChildRead,
  },
  together: { name: say.tables.readTogether, says: say.tables.whatAGroupRead },
  known: {
    name: say.tables.whatTheyKnow,
    says: say.tables.whatEachChildKnows,
  },
  spelling: {
    name: say.tables.spellingPapers,
    says: say.tables.whatEachChildWrote,
  },
  checks: { name: say.tables.shortChecks, says: say.tables.eachCheck },
};
