theme();
