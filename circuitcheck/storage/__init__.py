"""The drawing file: reading with every fault named, stable writing, safe saving, and its schema.

`reading` turns bytes into a Drawing or a DrawingError, `writing` a Drawing into bytes, `saver`
puts bytes on the disk whole or not at all, and `schema` tells other programs what a file may hold.
"""
