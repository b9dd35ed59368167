import { useState } from 'react'

export const usePacket = () => useState(0)
