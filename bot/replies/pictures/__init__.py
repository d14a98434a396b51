"""The pictures of a drill, drawn as SVG with the words that the text says too."""
