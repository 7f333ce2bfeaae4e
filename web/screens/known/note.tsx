/** What these figures are and are not; quietly, on every screen that shows some. */
export function Note() {
  return (
    <p class="quiet small known-note">
      Practice monitoring, not a diagnosis, and no norm. Your local rules and licensed specialists
      decide. It stays on this device.
    </p>
  );
}
