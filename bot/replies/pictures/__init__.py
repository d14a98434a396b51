"""The pictures of what the texts say, drawn as SVG: plate card, table plan, trend, the week's close and paper."""
