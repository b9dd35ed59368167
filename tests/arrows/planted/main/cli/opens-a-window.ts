import { BrowserWindow } from 'electron'

export const cliWindow = new BrowserWindow()
