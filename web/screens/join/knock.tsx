import { useEffect, useRef, useState } from 'preact/hooks';
import { QrCode } from '../../controls/qr-code.tsx';
import { admittingLink } from '../../state/link-for.ts';
import { makeKnock, waitToBeLetIn } from '../../state/sharing-acts.ts';
import { refusalSaid } from '../../wording/sharing-said.ts';
import { say } from './wording.ts';

/** The other way round: this screen shows a code, and a device that is in the class lets it in. */
export function Knock({ onIn }: { readonly onIn: () => void }) {
  const [shown, setShown] = useState<{ readonly code: string; readonly secret: string }>();
  const [said, setSaid] = useState('');
  const isOver = useRef(false);
  useEffect(
    () => () => {
      isOver.current = true;
    },
    [],
  );
  const show = async () => {
    const made = await makeKnock();
    const until = Date.now() + TEN_MINUTES;
    setShown(made);
    setSaid('');
    const done = await waitToBeLetIn(made.secret, () => isOver.current || Date.now() > until);
    if (isOver.current) return;
    setShown(undefined);
    if ('done' in done) onIn();
    else setSaid(done.why === 'spent' ? say.knock.theTenMinutes : refusalSaid(done.why));
  };
  return (
    <section class="join-knock" aria-labelledby="knock-title">
      <h2 id="knock-title">{say.knock.orLetAPhone}</h2>
      {shown ? (
        <>
          <QrCode text={admittingLink(shown.secret)} name={say.knock.codeToPoint} />
          <p class="typed-code">{shown.code}</p>
          <p class="quiet" role="status">
            {say.knock.pointThePhonesCamera}
          </p>
        </>
      ) : (
        <p class="buttons">
          <button type="button" class="button" onClick={show}>
            {say.knock.showACode}
          </button>
        </p>
      )}
      <p role="status">{said}</p>
    </section>
  );
}

/** In milliseconds. */
const TEN_MINUTES = 10 * 60 * 1000;
