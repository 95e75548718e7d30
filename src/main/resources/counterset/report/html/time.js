// time
