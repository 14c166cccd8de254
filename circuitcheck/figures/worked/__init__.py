"""The worked figures, one file each, found by walking: the file's name is the figure's."""
