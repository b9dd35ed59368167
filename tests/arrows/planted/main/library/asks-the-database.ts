import Database from 'better-sqlite3'

export const libraries = new Database('library.db')
