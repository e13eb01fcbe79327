"""A folder to start in: ``starter`` has its files, ``again`` takes over a block without its people."""
