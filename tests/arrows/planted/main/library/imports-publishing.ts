import { packet } from '../publish/packet.ts'

export const libraryPacket = packet
