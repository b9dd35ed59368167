import { BrowserWindow } from 'electron'

export const deskWindow = new BrowserWindow()
