import { task } from '../../state/class-now.ts';

/** Which skill is shown. */
export function Skill() {
  return (
    <label>
      Skill{' '}
      <select
        value={task.value}
        onChange={(event) => {
          task.value = event.currentTarget.value === 'spell' ? 'spell' : 'read';
        }}
      >
        <option value="read">reading</option>
        <option value="spell">spelling</option>
      </select>
    </label>
  );
}
