import { task } from '../../state/class-now.ts';
import { say } from './wording.ts';

/** Which skill is shown. */
export function Skill() {
  return (
    <label>
      {say.skill.skill}{' '}
      <select
        value={task.value}
        onChange={(event) => {
          task.value = event.currentTarget.value === 'spell' ? 'spell' : 'read';
        }}
      >
        <option value="read">{say.skill.reading}</option>
        <option value="spell">{say.skill.spelling}</option>
      </select>
    </label>
  );
}
