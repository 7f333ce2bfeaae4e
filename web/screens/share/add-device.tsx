import { useEffect, useState } from 'preact/hooks';
import { ROLES, type Role } from '../../../core/sharing/role.ts';
import { QrCode } from '../../controls/qr-code.tsx';
import { linkFor } from '../../state/link-for.ts';
import { tellOf } from '../../state/newcomers.ts';
import { asked, takeAsked } from '../../state/route.ts';
import { sharing } from '../../state/sharing.ts';
import {
  admit,
  type Invited,
  invite,
  nameDevice,
  remove,
  secretTyped,
} from '../../state/sharing-acts.ts';
import { ROLE_SAID, refusalSaid } from '../../wording/sharing-said.ts';
import { TimeLeft } from './time-left.tsx';
import { say } from './wording.ts';

/** Lets a device or a colleague in: first what it may do, then a code that is good once. */
export function AddDevice() {
  const [role, setRole] = useState<Role>('owner');
  const [name, setName] = useState('');
  const [code, setCode] = useState<(Invited & { readonly before: ReadonlySet<string> }) | null>(
    null,
  );
  const [said, setSaid] = useState('');
  const [isBusy, setBusy] = useState(false);
  const [typed, setTyped] = useState('');
  const members = sharing.value?.rights?.members;
  const spent = code !== null && sharing.value?.rights?.invitations.get(code.id)?.spent === true;
  useEffect(() => {
    if (!spent || code === null || !members) return;
    const came = [...members.values()].find(({ id }) => !code.before.has(id));
    if (!came) return;
    const called = name.trim() || defaultName(came.role);
    // A wall is gone after the warm-up; its name would stay.
    if (came.role !== 'wall') void nameDevice(came.by, called);
    tellOf([came.id]);
    setCode(null);
    setName('');
    setSaid(say.addDevice.hasComeIn(called));
  }, [spent, members]);

  const given = asked.value;
  const letIn = () => letInBy(given);
  const letInBy = (secret: string) => {
    if (asked.peek() !== '') takeAsked();
    setTyped('');
    return make(() => admit(role, secret));
  };
  const show = () => make(() => invite(role));
  const make = async (making: () => ReturnType<typeof invite>) => {
    setBusy(true);
    setSaid('');
    const made = await making();
    setBusy(false);
    if ('why' in made) return setSaid(refusalSaid(made.why));
    setCode({ ...made, before: new Set(members?.keys()) });
  };
  return (
    <section class="share-add not-printed" aria-labelledby="add-title">
      <h2 id="add-title">{say.addDevice.addADevice}</h2>
      <div class="share-steps">
        <fieldset class="share-roles" disabled={code !== null}>
          <legend>
            <span class="quiet">1</span> {say.addDevice.whatItMayDo}
          </legend>
          {ROLES.filter((each) => each !== 'school').map((each) => (
            <label key={each} class="share-role">
              <input
                type="radio"
                name="role"
                checked={role === each}
                onChange={() => setRole(each)}
              />
              <span>
                <b>{ROLE_SAID[each].name}</b>
                <span class="small">{ROLE_SAID[each].says}</span>
              </span>
            </label>
          ))}
          <label class="share-name">
            {say.addDevice.itsNameIf}
            <input
              type="text"
              value={name}
              maxLength={40}
              placeholder={defaultName(role)}
              autocomplete="off"
              onInput={(event) => setName(event.currentTarget.value)}
            />
          </label>
        </fieldset>
        <div class="share-code">
          <p class="share-step">
            <span class="quiet">2</span> {say.addDevice.pointItsCamera}
          </p>
          {code === null && given !== '' ? (
            <button type="button" class="button next" disabled={isBusy} onClick={letIn}>
              {isBusy ? say.addDevice.lettingItIn : say.addDevice.letTheOtherDevice}
            </button>
          ) : code === null ? (
            <>
              <button type="button" class="button next" disabled={isBusy} onClick={show}>
                {isBusy ? say.addDevice.makingACode : say.addDevice.showTheCode}
              </button>
              <form
                class="share-shown"
                onSubmit={async (event) => {
                  event.preventDefault();
                  const read = await secretTyped(typed);
                  if (read === null) setSaid(say.addDevice.thatIsNot);
                  else await letInBy(read);
                }}
              >
                <label class="share-name">
                  {say.addDevice.orTypeTheCode}
                  <input
                    type="text"
                    value={typed}
                    autocomplete="off"
                    autocapitalize="characters"
                    spellcheck={false}
                    onInput={(event) => setTyped(event.currentTarget.value)}
                  />
                </label>
                {typed.trim() !== '' && (
                  <button type="submit" class="button" disabled={isBusy}>
                    {say.addDevice.letItIn}
                  </button>
                )}
              </form>
            </>
          ) : code.code === '' ? (
            <p class="quiet">{say.addDevice.itComes}</p>
          ) : (
            <>
              <QrCode text={linkFor(code.secret)} name={say.addDevice.codeToPoint} />
              <p class="typed-code">{code.code}</p>
              <p class="small">
                {say.addDevice.forOneDeviceGood(
                  <TimeLeft until={code.until} onOver={() => setCode(null)} />,
                )}
              </p>
              <p class="quiet small share-link">
                {say.addDevice.orOpenThisAddress}{' '}
                <span class="share-address">{linkFor(code.secret)}</span>
              </p>
              <p class="buttons">
                <button
                  type="button"
                  class="button"
                  onClick={() => {
                    void remove(code.id);
                    setCode(null);
                  }}
                >
                  {say.addDevice.takeItBack}
                </button>
              </p>
            </>
          )}
          <p role="status">{said}</p>
        </div>
      </div>
    </section>
  );
}

function defaultName(role: Role): string {
  return names[role];
}

const names: Readonly<Record<Role, string>> = {
  owner: say.addDevice.mySecondDevice,
  teacher: say.addDevice.aColleague,
  aide: say.addDevice.anAide,
  specialist: say.addDevice.aSpecialist,
  wall: say.addDevice.theWall,
  school: say.addDevice.theSchool,
};
