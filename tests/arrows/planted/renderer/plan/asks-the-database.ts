import Database from 'better-sqlite3'

export const plans = new Database('plans.db')
