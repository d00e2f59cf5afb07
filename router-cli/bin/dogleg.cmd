@echo off
rem Starts Dogleg; builds it first where that has not been done. Written for Windows, not run there yet: see README.md.
setlocal
for %%I in ("%~dp0..\..") do set "PROJECT=%%~fI"
set "JAR=%PROJECT%\router-cli\target\router-cli.jar"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -version >nul 2>nul
if errorlevel 1 (
  echo dogleg: Java 17 or newer is needed: install a JDK. 1>&2
  exit /b 1
)
if exist "%JAR%" goto run
where mvn >nul 2>nul
if errorlevel 1 (
  echo dogleg: Maven is needed to build: install it. 1>&2
  exit /b 1
)
echo dogleg: first start: building Dogleg. Downloads about 65 MB of libraries and build tools, once ... 1>&2
pushd "%PROJECT%"
call mvn -q -B -Ddogleg.run -Dmaven.test.skip=true -pl router-cli -am package
if errorlevel 1 (
  popd
  exit /b 1
)
popd
:run
chcp 65001 >nul
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC "-Ddogleg.project=%PROJECT%" "-Ddogleg.typed=%~0" -jar "%JAR%" %*
exit /b %ERRORLEVEL%
