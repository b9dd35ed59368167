export const named = 'not in kebab-case'
