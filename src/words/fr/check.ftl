# What is said of a job file.
