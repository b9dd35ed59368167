/** True when a window can be shown: always on Windows and macOS, elsewhere when a display server is named. */
export function hasDisplay(): boolean {
  if (process.platform === 'win32' || process.platform === 'darwin') return true
  return (process.env['DISPLAY'] ?? '') !== '' || (process.env['WAYLAND_DISPLAY'] ?? '') !== ''
}
