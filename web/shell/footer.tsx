import { linkTo } from '../state/route.ts';

/** The foot of every page. */
export function Footer() {
  return (
    <footer class="footer">
      <p>Everything stays on this device.</p>
      <a href={linkTo('about')}>About and licenses</a>
    </footer>
  );
}
