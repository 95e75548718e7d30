theme();
clock();
