import type { MenuItemConstructorOptions } from 'electron'

/** The window's menu. Undo and redo of the job's records belong to the pages, so text editing keeps only its own roles. */
export function menuTemplate(platform: string): MenuItemConstructorOptions[] {
  const program: MenuItemConstructorOptions[] = platform === 'darwin' ? [{ role: 'appMenu' }] : []
  return [
    ...program,
    { label: 'File', submenu: [platform === 'darwin' ? { role: 'close' } : { role: 'quit' }] },
    { label: 'Edit', submenu: [{ role: 'cut' }, { role: 'copy' }, { role: 'paste' }, { role: 'selectAll' }] },
    {
      label: 'View',
      submenu: [
        { role: 'reload' },
        { type: 'separator' },
        { role: 'resetZoom' },
        { role: 'zoomIn' },
        { role: 'zoomOut' },
        { role: 'togglefullscreen' },
      ],
    },
    { role: 'windowMenu' },
  ]
}
