// theme
