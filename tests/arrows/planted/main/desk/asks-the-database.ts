import Database from 'better-sqlite3'

export const desks = new Database('desk.db')
