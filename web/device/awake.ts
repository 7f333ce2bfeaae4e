import { useEffect, useRef, useState } from 'preact/hooks';

const staysFor = 2600;

/** Whether she reaches for the buttons: true for a while after a pointer moved, or until toggled off. */
export function useAwake() {
  const [awake, setAwake] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);
  const wake = () => {
    clearTimeout(timer.current);
    setAwake(true);
    timer.current = setTimeout(() => setAwake(false), staysFor);
  };
  const toggle = () => {
    clearTimeout(timer.current);
    setAwake((now) => !now);
  };
  return { awake, wake, toggle };
}
