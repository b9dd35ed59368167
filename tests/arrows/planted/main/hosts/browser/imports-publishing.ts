import { packet } from '../../publish/packet.ts'

export const hostPacket = packet
