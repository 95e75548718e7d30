// clock
