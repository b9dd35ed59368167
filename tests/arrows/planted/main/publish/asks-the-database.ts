import Database from 'better-sqlite3'

export const packets = new Database('packets.db')
