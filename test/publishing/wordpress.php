<?php
// WordPress' own filters over what comes in, without a server or a database.
$root = $argv[1]; $filter = $argv[2];
define('ABSPATH', "$root/"); define('WPINC', 'wp-includes');
foreach (['plugin', 'compat', 'functions', 'formatting', 'kses'] as $file) {
  if (is_file("$root/wp-includes/$file.php")) require_once "$root/wp-includes/$file.php";
}
$html = stream_get_contents(STDIN);
echo $filter === 'kses' ? wp_kses_post($html) : wpautop($html);
